/** Well-control methods as boundary conditions; knows no ratings or verdicts. */
package staunch.control;
