/** Results as charts, depth downwards. The only place that knows XChart; knows no formulas and no files. */
package staunch.chart;
