/** Reads tables of published values for the reference tests, and writes the page of validation from what they compared. */
package staunch.reference;
