// The writers of PDF and DXF without the parts that write what our sheets don't hold. The test of the
// print bundle holds it to the bytes that the whole packages write.
import { readFile } from "node:fs/promises";
import { keepMembers } from "./keep-members.mjs";

/** Pictures of pixels, forms, tables, annotations, attachments, archives and locks go. */
const OF_PDFKIT = {
  kept: {
    AcroFormMixin: ["endAcroForm"],
    AnnotationsMixin: [],
    AttachmentsMixin: [],
    ImagesMixin: ["initImages"],
    LineWrapper: [],
    MarkingsMixin: ["initMarkings", "hasMarkInfoDictionary", "endPageMarkings", "endMarkings"],
    MetadataMixin: ["initMetadata"],
    PDFA: [],
    PDFMetadata: ["constructor"],
    PDFSecurity: ["generateFileID", "create"],
    PDFUA: [],
    StandardFont: [],
    SubsetMixin: ["initSubset"],
    TableMixin: ["initTables"],
    TextMixin: ["initText", "_text", "text", "widthOfString", "_initOptions", "_line", "_fragment"],
    // The colours of archives.
    iccProfileBase64: [],
  },
};

/** Hatches, dimensions, pictures, tables and all curves but circles go. */
const OF_DXF = {
  kept: {
    EntitiesManager: [
      ...["constructor", "dxfy", "addEntity", "boundingBox", "centerView", "viewHeight"],
      ...["addCircle", "addLine", "addLWPolyline", "addText"],
    ],
  },
  // The hatches that it knows by name.
  unmade: ["HatchPattern", "PredefinedHatchPatterns"],
};

export const slimWriters = {
  name: "slim-writers",
  setup({ onLoad }) {
    const slim = (filter, parts) =>
      onLoad({ filter }, async ({ path: file }) => ({
        contents: keepMembers(await readFile(file, "utf8"), parts),
      }));
    slim(/[\\/]pdfkit[\\/]js[\\/]pdfkit\..*\.mjs$/, OF_PDFKIT);
    slim(/[\\/]@tarikjabiri[\\/]dxf[\\/]lib[\\/]index\.mjs$/, OF_DXF);
  },
};
