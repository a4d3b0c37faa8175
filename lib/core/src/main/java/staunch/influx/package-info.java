/** How gas stands and moves in the annulus: columns of mud and gas, and a single bubble on its way up. */
package staunch.influx;
