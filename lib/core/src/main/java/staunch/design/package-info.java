/** The front door: a case with its casing designs, evaluated and compared. */
package staunch.design;
