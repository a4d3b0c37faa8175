/** Pore pressure, formation strength and temperature along vertical depth; knows no mud, kick or steel. */
package staunch.earth;
