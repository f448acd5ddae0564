// The part of clipper-lib that the tests use; the library has no types of its own.
declare module "clipper-lib" {
  interface IntPoint {
    X: number;
    Y: number;
  }

  interface PolyNode {
    Contour(): IntPoint[];
    Childs(): PolyNode[];
  }

  interface Library {
    ClipType: { ctIntersection: 0; ctUnion: 1; ctDifference: 2; ctXor: 3 };
    PolyType: { ptSubject: 0; ptClip: 1 };
    PolyFillType: { pftEvenOdd: 0; pftNonZero: 1; pftPositive: 2; pftNegative: 3 };
    PolyTree: new () => PolyNode;
    Clipper: new () => {
      AddPaths(paths: IntPoint[][], type: 0 | 1, closed: boolean): boolean;
      Execute(
        clip: 0 | 1 | 2 | 3,
        solution: PolyNode | IntPoint[][],
        subjectFill: 0 | 1 | 2 | 3,
        clipFill: 0 | 1 | 2 | 3,
      ): boolean;
    };
  }

  const ClipperLib: Library;
  export default ClipperLib;
}
