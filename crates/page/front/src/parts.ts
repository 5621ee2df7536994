// The parts of the page in their order. A further part joins here and nowhere else.
import type { FunctionComponent } from "preact";
import { NowPart } from "./parts/now";
import { PaperPart } from "./parts/paper";
import { PlanPart } from "./parts/plan";
import { PracticePart } from "./parts/practice";
import { SurveyPart } from "./parts/survey";
import { TimelinePart } from "./parts/timeline";

export interface Part {
  /// Its place in the address; its name is the text `page-part-ID`.
  id: string;
  view: FunctionComponent;
}

export const parts: Part[] = [
  { id: "survey", view: SurveyPart },
  { id: "plan", view: PlanPart },
  { id: "now", view: NowPart },
  { id: "timeline", view: TimelinePart },
  { id: "practice", view: PracticePart },
  { id: "paper", view: PaperPart },
];
