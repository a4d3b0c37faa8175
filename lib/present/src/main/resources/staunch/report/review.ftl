<#ftl output_format="HTML">
<#-- One template for the page and for the PDF: well-formed, so that the PDF engine reads it too. -->
<#macro mark outcome>
<#if outcome == "HOLDS"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><circle cx="7" cy="7" r="6" fill="#00734f"/><path d="M3.8 7.2 L6.2 9.6 L10.4 4.8" fill="none" stroke="#ffffff" stroke-width="1.8"/></svg>
<#elseif outcome == "FAILS"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><rect x="1" y="1" width="12" height="12" fill="#b23c00"/><path d="M4 4 L10 10 M10 4 L4 10" fill="none" stroke="#ffffff" stroke-width="1.8"/></svg>
<#elseif outcome == "NOT_ASSESSED"><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><path d="M7 1 L13.4 12.6 L0.6 12.6 Z" fill="#e69f00"/><path d="M7 5 L7 8.8 M7 9.8 L7 11.4" fill="none" stroke="#1f2933" stroke-width="1.6"/></svg>
<#else><svg class="mark" width="14" height="14" viewBox="0 0 14 14" xmlns="http://www.w3.org/2000/svg" aria-hidden="true"><circle cx="7" cy="7" r="5.6" fill="none" stroke="#77828d" stroke-width="1.6"/><path d="M3.6 7 L10.4 7" fill="none" stroke="#77828d" stroke-width="1.6"/></svg>
</#if>
</#macro>
<#macro table t>
<div class="block-table ${t.shape}"><h4>${t.name}</h4>
<#if t.empty><p class="none">None given.</p><#else><div class="scroll">${t.html}</div><#if t.caption?has_content><p class="caption">${t.caption}</p></#if></#if></div>
</#macro>
<#macro figure f>
<figure><#if f.drawn>${f.html}<#else><p class="not-drawn">Not drawn: ${f.reason}.</p></#if><figcaption>${f.title}</figcaption></figure>
</#macro>
<#macro sources s>
<div class="sources"><h4>Sources</h4>
<#if s.sources?has_content><ul><#list s.sources as x><li>${x}</li></#list></ul><#else><p class="none">The case names none for this section.</p></#if></div>
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
<tr><th>Revision</th><td>${header.revision}</td><th>Date</th><td>${header.date}</td><th>Casing design</th><td>${header.design}</td></tr>
<tr><th>Prepared</th><td>${header.prepared}</td><th>Checked</th><td>${header.checked}</td><th>Approved</th><td>${header.approved}</td></tr>
<tr><th>Depths from</th><td>${header.datum}</td><th>Units</th><td>${header.units}</td><th>Case warnings</th><td>${warnings?size}</td></tr>
</tbody></table>
</header>
<#if header.notice?has_content><p class="notice">${header.notice}</p></#if>

<section id="summary">
<h2>Section summary</h2>
<p class="answer">${answer}<#if maspAnswer?has_content> ${maspAnswer}</#if></p>
<#if departures?has_content><p class="departures">${departures}</p></#if>
<#if companions?has_content><p class="companions">Beside this page: <#list companions as c><a href="${c.file?url_path('UTF-8')}">${c.title}</a><#sep>, </#list></p></#if>
<div class="scroll">
<table class="summary">
<thead>
<tr><th class="s">Section</th><th class="v">Verdict</th><th class="k">Drilled kick<br/><span class="unit">tolerance / required</span></th><th class="k">Swabbed kick<br/><span class="unit">tolerance / required</span></th><th class="g">Governing limit</th><th class="n m">Least margin<br/><span class="unit">${marginUnit}, drilled<br/>over swabbed</span></th><th class="n a">Formation MAASP<br/><span class="unit">${maaspUnit}</span></th><th class="n l">Lowest surface limit<br/><span class="unit">${maaspUnit}</span></th><th class="n p">MASP<br/><span class="unit">${maaspUnit}</span></th></tr>
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
<div class="figures">
<@figure schematic/>
<@figure wellWindow/>
</div>
<div class="tables"><@table casing/><@table holes/><@table criteria/><@table tests/></div>
<#if evidence?has_content>
<h3>Offset evidence</h3>
<div class="tables"><#list evidence as e><@table e/></#list></div>
<#list pumpingCharts as f><@figure f/></#list>
</#if>
<#if warnings?has_content>
<h4>Warnings for the whole well</h4>
<ul class="warnings"><#list warnings as w><li><strong>${w.subject}</strong>: ${w.text}</li></#list></ul>
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
<tr><th>Drilled kick, formation</th><td>${s.drilled.full}. ${s.drilled.requiredText?cap_first}: ${s.drilled.verdict}.</td></tr>
<tr><th>Drilled kick, to surface</th><td>${s.drilled.toSurfaceFull}.</td></tr>
<tr><th>Swabbed kick, formation</th><td>${s.swabbed.full}. ${s.swabbed.requiredText?cap_first}: ${s.swabbed.verdict}.</td></tr>
<tr><th>Swabbed kick, to surface</th><td>${s.swabbed.toSurfaceFull}.</td></tr>
<tr><th>Likely estimates, formation</th><td>drilled ${s.drilled.likely}; swabbed ${s.swabbed.likely}.</td></tr>
<tr><th>Intensity for the required volume</th><td>${s.largestIntensity}.</td></tr>
<tr><th>Zero-gain margin</th><td>${s.zeroGain}.</td></tr>
<#if s.operations?? && s.operations.notAssessed == "">
<tr><th>Drilled kick, closed in, can wait</th><td>${s.operations.waitDrilled}.</td></tr>
<tr><th>Swabbed kick, closed in, can wait</th><td>${s.operations.waitSwabbed}.</td></tr>
</#if>
</#if>
<tr><th>Pressure window</th><td>${s.windowVerdict}.</td></tr>
<#list s.masps as m><tr><th>MASP, ${m.basis}</th><td>${m.full}<#if m.statement != m.outcomeTitle>: ${m.statement}</#if>.</td></tr>
</#list></tbody></table>
</div>
<#if s.warnings?has_content>
<h3>Warnings</h3>
<ul class="warnings"><#list s.warnings as w><li><strong>${w.subject}</strong>: ${w.text}</li></#list></ul>
</#if>
<#-- On sheets they fill the page that the verdict leaves open; on screen the charts come first. -->
<#if paged><@table s.assumptions/><@sources s/></#if>
<h3>Charts</h3>
<div class="figures">
<#list s.figures as f><@figure f/></#list>
</div>
<#if s.notDrawn?has_content><ul class="not-drawn"><#list s.notDrawn as f><li>Not drawn, ${f.reason}: ${f.titles}.</li></#list></ul></#if>
<#if s.operations?? && s.outcome != "NOT_SHUT_IN">
<h3>After an influx: circulating out, waiting, killing</h3>
<#if s.operations.notAssessed?has_content><p>${s.operations.notAssessed?cap_first}.</p><#else>
<@table s.operations.answers/>
<#if s.operations.warnings?has_content><ul class="warnings"><#list s.operations.warnings as w><li><strong>${w.subject}</strong>: ${w.text}</li></#list></ul></#if>
<#if companions?map(c -> c.file)?seq_contains(s.operations.killSheet)><p><a href="${s.operations.killSheet?url_path('UTF-8')}">Kill sheet of the ${s.operations.shown}</a>, for planning, on two sheets.</p></#if>
<p>Charts and tables: ${s.operations.shown}.</p>
<div class="figures">
<#list s.operations.figures as f><@figure f/></#list>
</div>
<#if s.operations.notDrawn?has_content><ul class="not-drawn"><#list s.operations.notDrawn as f><li>Not drawn, ${f.reason}: ${f.titles}.</li></#list></ul></#if>
<div class="tables"><#list s.operations.tables as t><@table t/></#list></div>
<@table s.operations.assumptions/>
</#if>
</#if>
<#if s.maaspTables?has_content>
<h3>MAASP</h3>
<div class="tables"><#list s.maaspTables as t><@table t/></#list></div>
</#if>
<#if s.maspTables?has_content>
<h3>MASP and ratings</h3>
<div class="tables"><#list s.maspTables as t><@table t/></#list></div>
</#if>
<#if s.toleranceTables?has_content>
<h3>Kick tolerance</h3>
<#if s.nowhereAssessed?has_content><p>Not assessed at any depth of the section: ${s.nowhereAssessed}.</p></#if>
<div class="tables"><#list s.toleranceTables as t><@table t/></#list></div>
</#if>
<#if s.hands?has_content>
<h3>Hand calculation beside the full answer</h3>
<div class="tables"><#list s.hands as t><@table t/></#list></div>
</#if>
<h3>Inputs</h3>
<div class="tables narrow"><#list s.inputTables as t><@table t/></#list></div>
<#if !paged>
<h3>Assumptions and sources</h3>
<@table s.assumptions/>
<@sources s/>
</#if>
</section>
</#list>

<section id="methods">
<h2>Methods, input files, cautions</h2>
<@table methods/>
<h4>Input files</h4>
<#if files?has_content>
<table class="staunch"><thead><tr><th>File</th><th>SHA-256</th></tr></thead><tbody><#list files as f><tr><td>${f.path}</td><td class="hash">${f.sha256}</td></tr></#list></tbody></table>
<#else><p class="none">The case was built in code, not read from files.</p></#if>
<#if !register.empty><#if paged><p>Where each number of the case comes from stands on the page of this review.</p><#else><details><summary>Where the numbers come from</summary><@table register/></details></#if></#if>
<h4>Cautions</h4>
<ul class="cautions">
<li>This is a planning aid. Every number in it is to be verified by a competent person before it is used.</li>
<li>Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail over it.</li>
<li>It answers for the inputs named here and nothing else; strengths that were not tested may be lower, pore pressures higher.</li>
<li>What follows after an influx is worked out for one bubble of gas, mud that does not let it slip while it is pumped, and no annular friction unless the method counts it. It plans; it does not guide a live well.</li>
<li>Equipment counts by its plain rating. Closing on, hanging off and shearing what is in the bore are not checked.</li>
<li>"Not assessed" means that the question is open, not that the section holds.</li>
</ul>
</section>
</div>
</body>
</html>
