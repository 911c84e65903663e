import { comparisonStyle } from "../../charts/index.ts";
import { reportStyle } from "./report-style.ts";

/** What a comparison and a design map add to the style sheet of a report. */
export const studyStyle: string = `${reportStyle}
${comparisonStyle}
.brief>section{margin-top:1.5rem}
.brief h2{font-size:1.05rem;margin-bottom:.5rem}
.brief dl{margin-bottom:.75rem}
.brief dd{grid-column:2}
.brief dt{font-weight:650;color:var(--sw-ink);overflow-wrap:anywhere;max-width:12rem}
.brief .facts{font-size:.92rem}
.owner td:nth-child(2),.quantities td:nth-child(2),.how-precise td:nth-child(3){white-space:nowrap}
.difference-rows table{width:100%}.difference-rows caption{max-width:110ch}
.difference-rows th,.difference-rows td{padding-right:1rem;overflow-wrap:break-word;font-variant-numeric:tabular-nums}
.difference-rows .mean{text-align:right}.difference-rows td.mean{white-space:nowrap}.difference-rows thead th{overflow-wrap:anywhere}
.difference-rows .bar{width:15rem;font-weight:400;font-size:.85rem;color:var(--sw-muted)}
.difference-rows .bar svg{display:block;width:15rem;height:auto}
.difference-rows .verdict{width:32%}.difference-rows .difference .verdict{font-weight:600}.difference-rows .unknown{color:var(--sw-muted)}
.sides-of-nought{display:flex;justify-content:space-between;gap:1rem;width:15rem;overflow-wrap:anywhere}.sides-of-nought span+span{text-align:right}
.two-widths svg{min-width:0;max-width:100%}
.two-widths .narrow{display:none}
.common>section,.common>details{margin-top:1.5rem}
.common h3{margin-top:1.25rem}
.common>section>h3{margin-top:0}
.owner+.owner{margin-top:1.5rem}
.owner .scroll{margin-top:1rem}
.owner .scroll table{min-width:52rem}
.owner tbody th{min-width:11rem}
.how-precise .scroll+.scroll{margin-top:1.5rem}
.brief .answers ul{max-width:none}
.efficient table,.points table{min-width:44rem}
.quantities tbody th{min-width:12rem}
.quantities .scroll+.scroll{margin-top:1.5rem}
.remark{display:inline-block;min-width:9rem}
.efficient .scroll,.begin .scroll,.apart .scroll{margin-top:1rem}
.turning-list>li{margin-bottom:.4rem}
.points td,.points th{font-size:.9rem}
@media (min-width:72rem){.brief{display:grid;grid-template-columns:minmax(0,7fr) minmax(0,6fr);gap:0 3rem;grid-template-areas:"lead side" "wide wide" "sign sign"}
.grid .brief{grid-template-columns:minmax(0,4fr) minmax(0,9fr);grid-template-areas:"lead side"}
.brief .regimens,.brief .varied{grid-area:lead}.brief .silence,.brief .answers{grid-area:side}.brief .main-differences{grid-area:wide}.brief .paper-only{grid-area:sign}}
@media (max-width:40rem){.brief dd{grid-column:1}}
@media screen{.difference-rows,.two-widths{container-type:inline-size}
@container (max-width:56rem){.difference-rows :is(table,caption,tbody){display:block;width:auto}
.difference-rows thead{position:absolute;left:-999rem}
.difference-rows tr{display:grid;grid-template-columns:max-content minmax(0,1fr);padding:.5rem 0;border-bottom:1px solid var(--sw-rule)}
.difference-rows :is(th,td){border:0;padding:0;grid-column:1/-1}
.difference-rows tbody th{font-weight:650}
.difference-rows td.mean{text-align:left;white-space:normal}.difference-rows .mean::before{content:attr(data-of) ": ";color:var(--sw-muted)}
.difference-rows .bar{width:auto}.difference-rows .bar svg{max-width:100%;margin-top:.25rem}
.difference-rows .verdict{width:auto}}
@container (max-width:790px){.two-widths .wide{display:none}.two-widths .narrow{display:block}.two-widths .narrow svg{max-width:28rem}}}
@media print{
.difference-rows :is(th,td){padding-right:3mm}.difference-rows .bar,.difference-rows .bar svg,.sides-of-nought{width:52mm}.difference-rows .bar{font-size:7.4pt}
.brief{display:flex;flex-direction:column;break-after:page}
.grid .brief{break-after:auto}
.brief>section{margin-top:4mm}.brief h2{font-size:10pt;margin-bottom:1mm}
.brief dt{max-width:34mm}
.brief .sign span{padding-top:9mm}.brief .sign:first-child span{padding-top:26mm}
.owner .scroll table{min-width:0}.owner tbody th,.quantities tbody th{min-width:0}.efficient table,.points table{min-width:0}
.owner .scroll th,.owner .scroll td{font-size:7pt;padding-right:2mm}
.owner .scroll{margin-top:3mm}
.common .number{white-space:normal}
}
`;
