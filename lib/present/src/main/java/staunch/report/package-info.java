/** The review pack as a page and as PDF, and results as fragments for notebooks; no number that is not in a result. */
package staunch.report;
