/** Turns a lofted body into closed triangles, and writes them as STL and OBJ. */
package mouldwright.exchange.mesh;
