<#ftl output_format="HTML">
<#-- One template for the page and for the PDF: well-formed, so that the PDF engine reads it too. -->
<#macro mark outcome>
<#if outcome == "HOLDS"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><circle cx="7" cy="7" r="6" fill="#00734f"/><path d="M3.8 7.2 L6.2 9.6 L10.4 4.8" fill="none" stroke="#ffffff" stroke-width="1.8"/></svg>
<#elseif outcome == "FAILS"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><rect x="1" y="1" width="12" height="12" fill="#b23c00"/><path d="M4 4 L10 10 M10 4 L4 10" fill="none" stroke="#ffffff" stroke-width="1.8"/></svg>
<#elseif outcome == "NOT_ASSESSED"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><path d="M7 1 L13.4 12.6 L0.6 12.6 Z" fill="#e69f00"/><path d="M7 5 L7 8.8 M7 9.8 L7 11.4" fill="none" stroke="#1f2933" stroke-width="1.6"/></svg>
<#else><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><circle cx="7" cy="7" r="5.6" fill="none" stroke="#77828d" stroke-width="1.6"/><path d="M3.6 7 L10.4 7" fill="none" stroke="#77828d" stroke-width="1.6"/></svg>
</#if>
</#macro>
<#macro table t level="h4">
<div class="block-table ${t.shape}"><${level} class="t" id="${t.id}">${t.name}</${level}>
<#if t.empty><p class="none">None given.</p><#else><div class="scroll">${t.html}</div><#if t.caption?has_content><p class="caption">${t.caption}</p></#if></#if></div>
</#macro>
<#-- On sheets two narrow tables stand beside each other in a row that is not cut; on screen each finds its place. -->
<#macro tables rows level="h4">
<#if paged><#list rows as row><#if row?size == 2><table class="beside"><tbody><tr><#list row as t><td><@table t level/></td></#list></tr></tbody></table><#else><@table row[0] level/></#if></#list>
<#else><div class="tables"><#list rows as row><#list row as t><@table t level/></#list></#list></div></#if>
</#macro>
<#macro figures list>
<#if paged><#list list?chunk(2) as row><table class="beside"><tbody><tr><#list row as f><td><@figure f/></td></#list></tr></tbody></table></#list>
<#else><div class="figures"><#list list as f><@figure f/></#list></div></#if>
</#macro>
<#macro notDrawn list>
<#if list?has_content><ul class="not-drawn"><#list list as f><li>Not drawn, ${f.reason}: ${f.titles}.</li></#list></ul></#if>
</#macro>
<#macro afterInflux o>
<h3>After an influx: circulating out, waiting, killing</h3>
<#if o.notAssessed?has_content><p>${o.notAssessed?cap_first}.</p><#else>
<@tables o.answers/>
<#if o.warnings?has_content><@warningList o.warnings/></#if>
<#if paged><p class="caption">Charts: ${o.shown}.</p></#if>
<#if companions?map(c -> c.file)?seq_contains(o.killSheet)><p><a href="${o.killSheet?url_path('UTF-8')}">Kill sheet of the ${o.shown}</a>, for planning, on two sheets.</p></#if>
</#if>
</#macro>
<#macro warningList list>
<ul class="warnings"><#list list as w><li><strong>${w.subject}</strong>: ${w.text}</li></#list></ul>
</#macro>
<#macro figure f>
<figure><#if f.drawn>${f.html}<#else><p class="not-drawn">Not drawn: ${f.reason}.</p></#if><figcaption>${f.title}</figcaption></figure>
</#macro>
<#macro sources s>
<div class="sources"><h4 class="t">Sources</h4>
<#if paged && s.sources?has_content><p>${s.sources?join("; ")}.</p><#elseif s.sources?has_content><ul><#list s.sources as x><li>${x}</li></#list></ul><#else><p class="none">The case names none.</p></#if></div>
</#macro>
<!DOCTYPE html>
<html lang="en" xmlns="http://www.w3.org/1999/xhtml">
<head>
<meta charset="UTF-8"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<meta name="color-scheme" content="light dark"/>
<title>Well-control review: ${header.well}</title>
<style>
${css}
</style>
</head>
<body>
<#if paged>
<div class="head">${header.well}: ${header.title}</div>
<div class="head-right">Revision ${header.revision}, ${header.date}</div>
<div class="foot">${header.notice}</div>
</#if>
<div class="page">
<header class="title">
<div class="name">
<p class="kind">Well-control review</p>
<h1>${header.well}</h1>
<p class="subtitle">${header.title}</p>
</div>
<table class="block"><tbody>
<tr><th scope="row">Revision</th><td>${header.revision}</td><th scope="row">Date</th><td>${header.date}</td><th scope="row">Casing design</th><td>${header.design}</td></tr>
<tr><th scope="row">Prepared</th><td>${header.prepared}</td><th scope="row">Checked</th><td>${header.checked}</td><th scope="row">Approved</th><td>${header.approved}</td></tr>
<tr><th scope="row">Depths from</th><td>${header.datum}</td><th scope="row">Units</th><td>${header.units}</td><th scope="row">Case warnings</th><td>${warnings?size}</td></tr>
</tbody></table>
</header>
<#if header.notice?has_content><p class="notice">${header.notice}</p></#if>

<section id="summary">
<h2>Section summary</h2>
<p class="answer">${answer}<#if maspAnswer?has_content> ${maspAnswer}</#if></p>
<#if departures?has_content><p class="departures">${departures}</p></#if>
<#if companions?has_content><p class="companions">Beside this page: <#list companions as c><a href="${c.file?url_path('UTF-8')}">${c.title}</a><#sep>, </#list></p></#if>
<div class="scroll">
<table class="summary" aria-label="Section summary">
<thead>
<tr><th scope="col" class="s">Section</th><th scope="col" class="v">Verdict</th><th scope="col" class="k">Drilled kick<br/><span class="unit">tolerance / required</span></th><th scope="col" class="k">Swabbed kick<br/><span class="unit">tolerance / required</span></th><th scope="col" class="g">Governing limit</th><th scope="col" class="n m">Least margin<br/><span class="unit">${marginUnit}, drilled<br/>over swabbed</span></th><th scope="col" class="n a">Formation MAASP<br/><span class="unit">${maaspUnit}</span></th><th scope="col" class="n l">Lowest surface limit<br/><span class="unit">${maaspUnit}</span></th><th scope="col" class="n p">MASP<br/><span class="unit">${maaspUnit}</span></th></tr>
</thead>
<tbody>
<#list sections as s>
<tr class="${s.outcome?lower_case}">
<td><a href="#${s.id}"><strong>${s.name}</strong></a><br/><span class="small nowrap">${s.depths}</span></td>
<td class="verdict"><@mark s.outcome/> <strong>${s.outcomeTitle}</strong><#if s.statement != s.outcomeTitle><br/><span class="small">${s.statement}</span></#if></td>
<td><#if s.outcome == "NOT_SHUT_IN"><span class="value">not shut in</span><#else><span class="value">${s.drilled.headline}</span> <span class="small">formation</span><br/><span class="value">${s.drilled.toSurface}</span> <span class="small">to surface</span><br/><span class="small nowrap">${s.drilled.requiredText}</span></#if></td>
<td><#if s.outcome == "NOT_SHUT_IN"><span class="value">not shut in</span><#else><span class="value">${s.swabbed.headline}</span> <span class="small">formation</span><br/><span class="value">${s.swabbed.toSurface}</span> <span class="small">to surface</span><br/><span class="small nowrap">${s.swabbed.requiredText}</span></#if></td>
<td>${s.governing}</td>
<td class="n">${s.drilled.margin}<br/><span class="second">${s.swabbed.margin}</span></td>
<td class="n">${s.formationMaasp}</td>
<td class="n">${s.lowestLimit}<#if s.lowestAt?has_content><br/><span class="small">${s.lowestAt}</span></#if></td>
<td class="n masp"><#if s.masps?has_content><#list s.masps?reverse as m><#if m?index == 0>${m.pressure} <span class="small">at ${m.at}</span><br/><strong class="${m.outcome?lower_case}">${m.outcomeTitle}</strong><#if m.statement != "holds"><br/><span class="small">${m.statement}</span></#if><#if s.masps?size != 1><br/><span class="small">${m.basis}</span></#if><#else><br/><span class="small">${m.basis} ${m.pressure}, ${m.outcomeTitle}</span></#if></#list><#else>–</#if></td>
</tr>
</#list>
</tbody>
</table>
</div>
<p class="caption">A planning aid, to be verified by a competent person; <a href="#methods">cautions</a>. Tolerance: geometric annulus volume the influx fills at shut-in, at bottom-hole conditions, rounded down; of the formation while it is circulated past it, and of casing and equipment while it is circulated to surface. Least margin: of the exposed formation while the required (or detectable) influx is circulated out; below zero it breaks. MAASP: static, with the original mud from choke to the weak point; void once influx is above it. MASP: maximum anticipated surface pressure, ${maspBasis}; a design load of wellhead, stack, casing and choke line with a verdict of its own, since it is no answer about circulating a kick. MAASP and margins rounded down, MASP up.</p>
</section>

<section id="well">
<h2>The well</h2>
<@figures [schematic, wellWindow]/>
<#if warnings?has_content>
<h3>Warnings for the whole well</h3>
<@warningList warnings/>
</#if>
<#if !paged><h3>Programme</h3></#if>
<@tables programme/>
<#if evidence?has_content>
<h3>Offset evidence</h3>
<@tables evidence/>
<@figures logCharts/>
<@figures pumpingCharts/>
</#if>
</section>

<#list sections as s>
<section class="hole" id="${s.id}">
<h2>${s.name}</h2>
<p class="facts">${s.facts}</p>
<div class="box ${s.outcome?lower_case}">
<p class="word"><@mark s.outcome/> <strong>${s.outcomeTitle?cap_first}</strong></p>
<#if s.statement != s.outcomeTitle><p>${s.statement?cap_first}.</p></#if>
<#if s.governing != "–"><p>Governing limit: ${s.governing}.</p></#if>
<table class="pairs"><tbody>
<#if s.outcome != "NOT_SHUT_IN">
<tr><th scope="row">Drilled kick, formation</th><td>${s.drilled.full}. ${s.drilled.requiredText?cap_first}: ${s.drilled.verdict}.</td></tr>
<tr><th scope="row">Drilled kick, to surface</th><td>${s.drilled.toSurfaceFull}.</td></tr>
<tr><th scope="row">Swabbed kick, formation</th><td>${s.swabbed.full}. ${s.swabbed.requiredText?cap_first}: ${s.swabbed.verdict}.</td></tr>
<tr><th scope="row">Swabbed kick, to surface</th><td>${s.swabbed.toSurfaceFull}.</td></tr>
<tr><th scope="row">Likely estimates, formation</th><td>drilled ${s.drilled.likely}; swabbed ${s.swabbed.likely}.</td></tr>
<tr><th scope="row">Intensity for the required volume</th><td>${s.largestIntensity}.</td></tr>
<tr><th scope="row">Zero-gain margin</th><td>${s.zeroGain}.</td></tr>
<#if s.operations?? && s.operations.notAssessed == "">
<tr><th scope="row">Drilled kick, closed in, can wait</th><td>${s.operations.waitDrilled}.</td></tr>
<tr><th scope="row">Swabbed kick, closed in, can wait</th><td>${s.operations.waitSwabbed}.</td></tr>
</#if>
</#if>
<tr><th scope="row">Pressure window</th><td>${s.windowVerdict}.</td></tr>
<#list s.masps as m><tr><th scope="row">MASP, ${m.basis}</th><td>${m.full}<#if m.statement != m.outcomeTitle>: ${m.statement}</#if>.</td></tr>
</#list></tbody></table>
</div>
<#if s.warnings?has_content>
<h3>Warnings</h3>
<@warningList s.warnings/>
</#if>
<#assign followed = s.operations?? && s.outcome != "NOT_SHUT_IN">
<#-- On sheets all answers come first, and all charts after them without a gap; on screen each chart stands with its answer. -->
<#if paged>
<#if followed><@afterInflux s.operations/></#if>
<@figures s.figures + followed?then(s.operations.figures![], [])/>
<@notDrawn s.notDrawn/>
<#if followed><@notDrawn s.operations.notDrawn![]/></#if>
<#else>
<h3>Charts</h3>
<@figures s.figures/>
<@notDrawn s.notDrawn/>
<#if followed>
<@afterInflux s.operations/>
<#if s.operations.notAssessed == ""><p>Charts: ${s.operations.shown}.</p></#if>
<@figures s.operations.figures![]/>
<@notDrawn s.operations.notDrawn![]/>
</#if>
</#if>
<#if s.limits?has_content>
<h3>Margins, MAASP, MASP and ratings</h3>
<@tables s.limits/>
</#if>
<#if s.sensitivity??>
<h3>What the verdict hangs on</h3>
<@tables s.sensitivity.rows/>
<#if s.sensitivity.figures?has_content><@figures s.sensitivity.figures/></#if>
<@notDrawn s.sensitivity.notDrawn/>
</#if>
<#if !paged || s.assumptions?has_content><h3>Assumptions<#if !paged> and sources</#if></h3></#if>
<#if s.outcome != "NOT_SHUT_IN" && shared?has_content><p class="caption">What every section assumes alike stands once, <a href="#methods">under the methods</a><#if paged>, and so do the sources</#if>.</p></#if>
<@tables s.assumptions/>
<#if s.operations?? && s.operations.notAssessed == "" && s.outcome != "NOT_SHUT_IN"><@tables s.operations.assumptions/></#if>
<#if !paged><@sources s/></#if>
<#if !paged><#list s.details as d>
<details class="behind"><summary>${d.title}</summary>
<#if d.note?has_content><p>${d.note}</p></#if>
<@tables d.rows/>
</details>
</#list></#if>
</section>
</#list>

<section id="methods">
<h2>Methods, input files, cautions</h2>
<@table methods "h3"/>
<@tables shared "h3"/>
<#if paged><@sources {"sources": allSources}/></#if>
<h3 class="t">Input files</h3>
<#if files?has_content>
<table aria-label="Input files" class="staunch"><thead><tr><th scope="col">File</th><th scope="col">SHA-256</th></tr></thead><tbody><#list files as f><tr><td>${f.path}</td><td class="hash">${f.sha256}</td></tr></#list></tbody></table>
<#else><p class="none">The case was built in code, not read from files.</p></#if>
<#if !register.empty><#if paged><p>Where each number of the case comes from stands on the page of this review.</p><#else><details><summary>Where the numbers come from</summary><@table register "h3"/></details></#if></#if>
<h3 class="t">Cautions</h3>
<ul class="cautions">
<li>This is a planning aid. Every number in it is to be verified by a competent person before it is used.</li>
<li>Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail over it.</li>
<li>It answers for the inputs named here and nothing else; strengths that were not tested may be lower, pore pressures higher.</li>
<li>What follows after an influx is worked out for one bubble of gas, mud that does not let it slip while it is pumped, and no annular friction unless the method counts it. It plans; it does not guide a live well.</li>
<li>Equipment counts by its plain rating. Closing on, hanging off and shearing what is in the bore are not checked.</li>
<li>"Not assessed" means that the question is open, not that the section holds.</li>
</ul>
</section>
<#if paged>
<section id="behind">
<h2>Appendix: tables by section</h2>
<p>The curves of the charts stand in numbers on the page of this review and in its export.</p>
<@tables inputs/>
<#list sections as s>
<h3 class="of-section">${s.name}</h3>
<#list s.details as d>
<#if d.note?has_content><p>${d.note}</p></#if>
<@tables d.rows/>
</#list>
</#list>
</section>
</#if>
</div>
</body>
</html>
