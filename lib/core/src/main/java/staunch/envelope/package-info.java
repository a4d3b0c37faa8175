/** Kick tolerance, MAASP and margins at each depth, and which limit governs. */
package staunch.envelope;
