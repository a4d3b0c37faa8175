<#ftl output_format="HTML">
<#macro table t>
<div class="block-table"><h4>${t.name}</h4><div class="scroll">${t.html}</div><#if t.caption?has_content><p class="caption">${t.caption}</p></#if></div>
</#macro>
<!DOCTYPE html>
<html lang="en" xmlns="http://www.w3.org/1999/xhtml">
<head>
<meta charset="UTF-8"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<meta name="color-scheme" content="light dark"/>
<title>What changed: ${well}</title>
<style>
${css}
</style>
</head>
<body>
<div class="page">
<header class="title">
<div class="name">
<p class="kind">What changed since an earlier run</p>
<h1>${well}</h1>
<p class="subtitle">${title}</p>
</div>
<table class="block"><tbody>
<tr><th>Revision</th><td>${revision}</td><th>Date</th><td>${date}</td></tr>
<tr><th>Units</th><td>${units}</td><th>Earlier run by library</th><td>${library}</td></tr>
</tbody></table>
</header>
<#if notice?has_content><p class="notice">${notice}</p></#if>

<section id="summary">
<h2>Answer</h2>
<p class="answer">${answer}</p>
<#if notAttributed?has_content><p>Nothing is attributed: ${notAttributed}.</p></#if>
<#if notCompared?has_content><p>Not compared: ${notCompared}.</p></#if>
<@table sections/>
<#list causes as c><@table c/></#list>
</section>

<#list changed as s>
<section class="hole">
<h2>${s.name}</h2>
<#if s.verdict?has_content><div class="box ${s.outcome?lower_case}"><p class="word"><strong>${s.verdict}</strong></p><#if s.turned?has_content><p>${s.turned}</p></#if><#if s.now?has_content><p>${s.now}</p></#if></div></#if>
<#if s.figures?has_content><div class="figures"><#list s.figures as f><figure>${f.html}<figcaption>${f.title}</figcaption></figure></#list></div></#if>
<#list s.tables as t><@table t/></#list>
</section>
</#list>

<#if toJudge?has_content>
<section id="to-judge">
<h2>To be judged in the later case</h2>
<ul class="warnings"><#list toJudge as w><li>${w}</li></#list></ul>
</section>
</#if>

<section id="methods">
<h2>Input files, cautions</h2>
<#list [["Before", filesBefore], ["After", filesAfter]] as set>
<h4>${set[0]}</h4>
<#if set[1]?has_content><table class="staunch"><thead><tr><th>File</th><th>SHA-256</th></tr></thead><tbody><#list set[1] as f><tr><td>${f.path}</td><td class="hash">${f.sha256}</td></tr></#list></tbody></table><#else><p class="none">The case was built in code, not read from files.</p></#if>
</#list>
<h4>Cautions</h4>
<ul class="cautions">
<li>This is a planning aid. Every number in it is to be verified by a competent person before it is used.</li>
<li>Local regulations, the rig's own procedures and the judgement of certified well-control staff prevail over it.</li>
<li>An attribution tells what the calculation does with changed inputs. It does not tell which of two measurements is right.</li>
<li>"Not assessed" means that the question is open, not that the section holds.</li>
</ul>
</section>
</div>
</body>
</html>
