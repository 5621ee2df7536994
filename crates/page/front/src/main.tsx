import { render } from "preact";
import { Shell } from "./shell";
import { begin } from "./state";
import "./style/base.css";
import "./style/parts.css";
import "uplot/dist/uPlot.min.css";

const root = document.getElementById("page")!;
begin().then(
  () => render(<Shell />, root),
  (error: Error) => render(<main class="failed"><h1>Airtide</h1><p role="alert">{error.message || "The program is not running."}</p></main>, root),
);
