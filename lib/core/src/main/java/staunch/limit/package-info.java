/** Ratings of casing and pressure equipment; knows no rock and not how a load arose. */
package staunch.limit;
