/** Constants whose change by 1 % no check notices, and why that is so. */
export const survivors: Readonly<Record<string, string>> = {
  "channel/critical.ts: 2 in criticalDepth":
    "tells only which of several critical depths has the least energy; the depths are exact without it",
  "channel/critical.ts: 2 in criticalDepth (2)": "as the one before",
  "channel/critical.ts: 3 in criticalFor":
    "tells only where the curve of critical discharge turns; the depths found are exact without it",
  "channel/energy.ts: 1 in energyPieces":
    "the coefficient that is not given: tells only where energy turns; the depths found are exact without it",
  "channel/jump.ts: 1 in conjugateDepths":
    "the coefficient that is not given: tells only where specific force turns; the depths found are exact without it",
  "channel/survey.ts: 1 in surveyedSection":
    "how far above the highest point a check looks for water that is carried",
  "channel/wet.ts: 0.5 in circular":
    "where a series and a closed form change over: both give the same area there",
  "channel/wet.ts: 0.5 in circular (2)":
    "where a series and a closed form change over: both give the same moment there",
  "column/choice.ts: 1e-6 in logFamily": "the first guess of an iteration that forgets it",
  "column/profile.ts: 2 in footOf":
    "where a law with a wake below 0 comes above 0: no speed is there, so the mean does not feel a small shift of it",
  "column/profile.ts: 2 in footOf (2)": "as the one before",
  "column/profile.ts: 2 in footOf (3)": "as the one before",
  "column/profile.ts: 1 in measuredShape": "the unit of a shape of still water: it multiplies nothing",
  "forces/sinker-drag.ts: 1 in sinkerKernel":
    "skips a body that lies wholly along the stream, whose drag across is nothing without it",
  "drift/unsteady-tally.ts: 1 in shareInside":
    "for a sinker that has not moved to the last bit in one step: no reference answer does that",
};
