/** The front door: a case with its casing designs, evaluated. */
package staunch.design;
