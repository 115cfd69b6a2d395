/** What other programs exchange with us: offsets read from tables and drawings, and meshes written. Nothing here opens a file: texts come in,
 *  values go out, and what is wrong is a value too. */
package mouldwright.exchange;
