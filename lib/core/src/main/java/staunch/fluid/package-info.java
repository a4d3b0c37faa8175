/** Gas and mud: density, deviation factor, viscosity, each with its stated range; knows no depth, hole or time. */
package staunch.fluid;
