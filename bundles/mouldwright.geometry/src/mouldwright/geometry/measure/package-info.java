/** Areas, volumes and centroids of lofted bodies. */
package mouldwright.geometry.measure;
