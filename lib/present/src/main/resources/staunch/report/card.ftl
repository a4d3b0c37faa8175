<#ftl output_format="HTML">
<div class="staunch-card" style="border-left:4px solid #0072b2;padding:2px 12px;margin:4px 0;font-variant-numeric:tabular-nums">
<div style="font-weight:bold">${title}</div>
<#if lines?has_content>
<table style="border:0;margin:2px 0"><tbody>
<#list lines as l>
<tr style="background:none"><td style="text-align:left;vertical-align:top;padding:1px 14px 1px 0;opacity:.75">${l.name}</td><td style="text-align:left;padding:1px 0">${l.value}</td></tr>
</#list>
</tbody></table>
</#if>
<#list tables as t>
${t.html}
</#list>
</div>
