/** Results as tables: for notebooks, pages and terminals. The only place that knows Tablesaw; knows no formulas. */
package staunch.table;
