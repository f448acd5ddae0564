// Node's strict assertions, for the extension host in a browser.
import assert from "assert";

export default assert.strict;
