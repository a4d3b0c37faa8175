/** Dimensions, unit systems, parsing and printing of quantities, and the faults and warnings every layer speaks in. */
package staunch.units;
