/** What the report of a day adds to the style sheet of a report: answers beside the clock, the sheets that it is on paper, the first page of several dressings. */
export const sheetStyle = `.pair{margin-top:1.25rem}
.overview{margin-top:1.5rem}
.overview ul{list-style:none;margin:0;padding:0}
.overview li{display:flex;flex-wrap:wrap;gap:.35rem 1.25rem;align-items:center;padding:.6rem 0;border-bottom:1px solid var(--sw-rule)}
.overview svg{flex:none;width:15rem;max-width:100%;height:24px}
.overview a{font-weight:650;min-width:8rem;overflow-wrap:anywhere}
.overview li>div{flex:1 1 18rem}.overview li p{margin:0}
@media (min-width:72rem){.pair{display:grid;grid-template-columns:minmax(0,5fr) minmax(0,6fr);gap:0 3rem}}
@media (max-width:72rem){.pair section+section{margin-top:1.75rem}}
@media print{
.pair{display:grid;grid-template-columns:minmax(0,6fr) minmax(0,10fr);grid-template-rows:auto 1fr;gap:0 6mm;margin-top:2.5mm}.pair section+section{margin-top:0}
.sheet{break-after:page;break-inside:avoid}
.sheet .clock{font-size:7.4pt}.sheet .clock table{width:100%;line-height:1.25}.tight .answers{font-size:7.2pt}.tight .pair{grid-template-columns:repeat(2,minmax(0,1fr));margin-top:1mm}.tight>section{margin-top:1mm}
.sheet .answers{display:contents}.sheet .answers h3{grid-area:1/1}.sheet .answers ul{grid-area:2/1}.sheet .pair>.clock{grid-area:1/2/3}.sheet>.caution{margin:.6mm 0;padding-top:0;padding-bottom:0}
.later .clock tbody th{white-space:nowrap}.sheet .clock th,.sheet .clock td{padding-top:.35mm;padding-bottom:.35mm}
.rest{font-size:7.4pt;margin:1mm 0 0}
.several .dressing{break-before:page}.together{display:grid;grid-template-columns:1fr 1fr;gap:0 8mm;align-items:start}.together>h2{grid-column:1/-1}
.tight .sign{margin-top:1.5mm}.tight .sign span{padding-top:5mm}
}
`;
