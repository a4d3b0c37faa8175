/** The command line, the machine interface, and the one place where the notebook kernel meets the displays. */
package staunch.cli;
