/**
 * The project a spec belongs to, and the one confined way to read its files.
 *
 * <p>The root of a project is the nearest folder upward with a file {@code mouldwright.project}, else the file's own
 * folder. Nothing outside the root is read, but for the library folders the project file names. Bad input becomes a value
 * with a place and a message, never an exception.
 */
package mouldwright.project;
