import { comparisonStyle } from "../charts/index.ts";
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
.two-widths svg{min-width:0;max-width:100%}
.two-widths .narrow{display:none}
.common>section,.common>details{margin-top:1.5rem}
.common h3{margin-top:1.25rem}
.common>section>h3{margin-top:0}
.owner+.owner{margin-top:1.5rem}
.owner .scroll{margin-top:1rem}
.owner table{min-width:52rem}
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
@media screen and (max-width:44rem){.two-widths .wide{display:none}.two-widths .narrow{display:block}.two-widths .narrow svg{max-width:28rem}}
@media print{
.brief{display:flex;flex-direction:column;break-after:page}
.grid .brief{break-after:auto}
.brief>section{margin-top:4mm}.brief h2{font-size:10pt;margin-bottom:1mm}
.brief dt{max-width:34mm}
.brief .sign span{padding-top:9mm}.brief .sign:first-child span{padding-top:26mm}
.owner table{min-width:0}.owner tbody th,.quantities tbody th{min-width:0}.efficient table,.points table{min-width:0}
.owner th,.owner td{font-size:7pt;padding-right:2mm}
.owner .scroll{margin-top:3mm}
.common .number{white-space:normal}
}
`;
