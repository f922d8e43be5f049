/** Constants whose change by 1 % no check notices, and why that is so. */
export const survivors: Readonly<Record<string, string>> = {
  "channel/critical.ts: 3 in criticalFor":
    "tells only where the curve of critical discharge turns; the depths found are exact without it",
  "channel/wet.ts: 0.5 in circular":
    "where a series and a closed form change over: both give the same area there",
  "channel/wet.ts: 0.5 in circular (2)":
    "where a series and a closed form change over: both give the same moment there",
  "column/choice.ts: 1e-6 in logFamily": "the first guess of an iteration that forgets it",
  "drift/unsteady-chain.ts: 0.5 in floatAddedShare":
    "our assumption; it delays the float by a trace and has no effect on where it settles",
  "drift/unsteady-drag.ts: 0.5 in addLink (2)":
    "the mean speed of a link's two ends across the stream: no reference answer moves sideways",
  "drift/unsteady-drag.ts: 0.5 in addLink (3)":
    "the mean speed of a link's two ends up and down: it acts while the line falls, where no reference answer is",
  "drift/unsteady-drag.ts: 0.5 in addLink (5)":
    "half of the skin friction of a link: on a line that hangs it is a ten-thousandth of the drag across; the settled rig's own is noticed",
};
