import { chartStyle, comparisonStyle, themeRules } from "../../charts/index.ts";

/** The style sheet of a report: light, dark and paper; from 320 px to the widest screen. */
export const reportStyle: string = `${themeRules(":root")}
${chartStyle}
:root{color-scheme:light dark;font-size:clamp(16px,.35vw + 11px,22px)}
*{box-sizing:border-box}
body{margin:0;background:var(--sw-paper);color:var(--sw-ink);font:1rem/1.5 system-ui,-apple-system,"Segoe UI",Roboto,"Noto Sans","DejaVu Sans",sans-serif;overflow-wrap:break-word}
body>header,main,body>footer{max-width:76rem;margin:0 auto;padding:0 clamp(1rem,3vw,2.5rem)}
body>header{padding-top:clamp(1rem,3vw,2.25rem)}
h1{font-size:1.75rem;line-height:1.2;margin:0 0 .5rem;font-weight:650;overflow-wrap:anywhere}
h2{font-size:1.35rem;line-height:1.25;margin:0 0 .4rem;overflow-wrap:anywhere}
h3{font-size:1.05rem;margin:0 0 .5rem}
p{margin:0 0 .5rem;max-width:72ch}
body>header p,.sheet>p{max-width:110ch}
.facts,.muted,figcaption,caption{color:var(--sw-muted)}
.caution{border-left:4px solid var(--sw-alarm);padding:.1rem 0 .1rem .75rem}
strong{font-weight:680}
a{color:var(--sw-water-text)}
:focus-visible{outline:3px solid var(--sw-water);outline-offset:2px}
.skip{position:absolute;left:-999rem}
.skip:focus{left:1rem;top:1rem;background:var(--sw-paper);padding:.5rem 1rem;z-index:1}
.dressing,.common,.together{border-top:2px solid var(--sw-line);margin-top:2rem;padding-top:1.25rem}
.dressing>section,.sheet>section,.common>section,.together>section{margin-top:1.75rem}
.answers .caution{margin-top:.75rem}
.answers ul{margin:0;padding:0;list-style:none;max-width:68ch}
.answers li{padding:.35rem 0;border-bottom:1px solid var(--sw-rule)}
.answers li:last-child{border-bottom:0}
ul.plain{margin:0;padding-left:1.2rem;max-width:72ch}
.scroll{overflow-x:auto;max-width:100%}
table{border-collapse:collapse;font-variant-numeric:tabular-nums;line-height:1.35}
caption{text-align:left;padding:0 0 .4rem;font-size:.9rem;max-width:min(68ch,100vw - 2rem)}
th,td{text-align:left;vertical-align:top;padding:.3rem 1.1rem .3rem 0;border-bottom:1px solid var(--sw-rule)}
th{font-weight:600}
tbody th{font-weight:400}
thead th{border-bottom:1.5px solid var(--sw-muted)}
.number{text-align:right;white-space:nowrap}
td:last-child,th:last-child{padding-right:0}
.pad{visibility:hidden}
.clock tbody th{font-weight:650;width:1%}
.clock td:nth-child(3){white-space:nowrap}
.sources td,.sources th{font-size:.85rem}
.sources code{font-size:1em;overflow-wrap:normal}
figure{margin:0}
figure svg{display:block;width:100%;min-width:54rem;height:auto}
figcaption{font-size:.9rem;margin-top:.35rem;max-width:110ch}
.line figcaption{margin-bottom:0}
.clock table{min-width:27rem}
.clock td:nth-child(2){min-width:10.5rem}
.clock td:last-child{min-width:9rem}
.totals table{min-width:40rem}
.totals tbody th{min-width:12rem}
.alarms table{min-width:30rem;margin-top:1.25rem}
.sources .number{white-space:normal;overflow-wrap:anywhere;min-width:6rem}
.sources table{min-width:52rem}
details{margin-top:.75rem}
summary{cursor:pointer}
dl{display:grid;grid-template-columns:max-content 1fr;gap:.2rem 1.25rem;margin:0 0 1rem}
dt{color:var(--sw-muted)}
dd{margin:0;overflow-wrap:anywhere}
body>footer{margin-top:2.5rem;padding-top:1rem;padding-bottom:3rem;border-top:2px solid var(--sw-line);font-size:.92rem}
.paper-only{display:none}
@media screen and (max-width:40rem){
.clock table{display:block;min-width:0}
.clock thead{position:absolute;left:-999rem}
.clock caption,.clock tbody{display:block}
.clock tr{display:grid;grid-template-columns:4.2rem 1fr max-content;gap:0 .5rem;padding:.4rem 0;border-bottom:1px solid var(--sw-rule)}
.clock th,.clock td,.clock td:nth-child(2){border:0;padding:0;min-width:0}
.clock tbody th{width:auto;grid-row:1/3}
.clock td:last-child{grid-column:2/4;color:var(--sw-muted)}
}
@media (max-width:40rem){h1{font-size:1.4rem}dl{grid-template-columns:1fr;gap:0}dd{margin-bottom:.5rem}th,td{padding-right:.75rem}}
@media print{
@page{margin:10mm 11mm}
:root{font-size:8.2pt;color-scheme:light}
body{line-height:1.3}
body>header,main,body>footer{max-width:none;padding:0}
h1{font-size:15pt;margin-bottom:1mm}h2{font-size:12pt;margin-bottom:.5mm}h3{font-size:10pt;margin-bottom:1mm}
p{max-width:none;margin-bottom:1mm}
.answers ul,ul.plain,caption,figcaption,body>header p,.sheet>p{max-width:none}
.clock th,.clock td{padding-right:2.5mm}.clock td:nth-child(2){min-width:31mm}
.clock table,.clock td:last-child,.totals table,.totals tbody th,.alarms table,.sources table{min-width:0}
.common .scroll :is(th,td){padding-right:2.5mm;white-space:normal}.rules table,.orders table{font-size:7.2pt}
.sources .number{min-width:16mm}.sources td,.sources th{font-size:7.4pt}
.alarms table{margin-top:3mm}
.answers li{padding:.5mm 0}
.dressing,.common,.together{margin-top:3mm;padding-top:2.5mm;border-top-width:1px}
.dressing>section,.sheet>section,.common>section,.together>section{margin-top:3mm}
th,td{padding-top:.6mm;padding-bottom:.6mm}
.scroll{overflow:visible}
figure svg{min-width:0}
.skip,details:not([open]),.screen-only{display:none}
.paper-only{display:block}
figure svg{max-width:188mm}
tr,li,figure{break-inside:avoid}
h2,h3,caption{break-after:avoid}
a{color:inherit;text-decoration:none}
.sign{display:flex;gap:6mm;margin-top:4mm}
.sign span{flex:1;border-bottom:1px solid var(--sw-ink);padding-top:6mm;font-size:8pt}
}
`;

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
