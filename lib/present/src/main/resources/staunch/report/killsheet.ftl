<#ftl output_format="HTML">
<#-- Two sheets, well-formed, so that the PDF engine reads it too. -->
<#macro table t class="">
<div class="block-table ${class}"><h2>${t.name}</h2>
${t.html}<#if t.caption?has_content><p class="caption">${t.caption}</p></#if></div>
</#macro>
<#macro head sheet>
<div class="top">
<p class="kind">Kill sheet for planning, sheet ${sheet} of 2</p>
<p class="name"><strong>${header.well}</strong>, ${header.section}</p>
<p class="not-live">${notice}</p>
</div>
</#macro>
<#macro foot>
<p class="foot">Planning aid: every number is to be verified by a competent person. Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail. How gas expands on its way is not part of this sheet.</p>
</#macro>
<!DOCTYPE html>
<html lang="en" xmlns="http://www.w3.org/1999/xhtml">
<head>
<meta charset="UTF-8"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<title>Kill sheet for planning: ${header.well}, ${header.section}</title>
<style>
${css}
</style>
</head>
<body>
<div class="sheet">
<@head 1/>
<table class="block"><tbody>
<tr><th>Casing design</th><td>${header.design}</td><th>Revision</th><td>${header.revision}</td><th>Date</th><td>${header.date}</td></tr>
<tr><th>Prepared</th><td>${header.prepared}</td><th>Checked</th><td>${header.checked}</td><th>Approved</th><td>${header.approved}</td></tr>
<tr><th>Depths from</th><td>${header.datum}</td><th>Units</th><td>${header.units}</td><th>Readings</th><td>${header.basis}</td></tr>
</tbody></table>
<#if header.notice?has_content><p class="notice">${header.notice}</p></#if>
<table class="answers"><tbody>
<tr><#list answers as a><th>${a.name}</th></#list></tr>
<tr><#list answers as a><td>${a.value}</td></#list></tr>
</tbody></table>
<p class="answer">${answer}</p>
<table class="columns"><tbody><tr>
<td><#list left as t><@table t "pairs"/></#list></td>
<td><#list right as t><@table t "pairs"/></#list><#if surface><p class="caption">Stack at surface: no correction for a choke line.</p></#if></td>
</tr></tbody></table>
<@table volumes/>
<@foot/>
</div>
<div class="sheet last">
<@head 2/>
<@table schedule "schedule"/>
<div class="figure">${figure}</div>
<#if warnings?has_content>
<h2>Warnings</h2>
<ul><#list warnings as w><li><strong>${w.subject}</strong>: ${w.text}</li></#list><#if moreWarnings gt 0><li>${moreWarnings} more in the full results.</li></#if></ul>
</#if>
<table class="signed"><tbody><tr><th>Worked out by hand beside it by</th><td></td><th>Checked by</th><td></td><th>Date</th><td></td></tr></tbody></table>
<@foot/>
</div>
</body>
</html>
