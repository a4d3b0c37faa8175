/** Datum, survey, hole, casing, string and annulus: measured depth, vertical depth and volume; knows no pressure. */
package staunch.well;
