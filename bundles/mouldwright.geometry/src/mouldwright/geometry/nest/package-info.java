/** Laying flat parts on sheets: any outline, with or without openings, a saw cut apart, parts inside the openings of others. */
package mouldwright.geometry.nest;
