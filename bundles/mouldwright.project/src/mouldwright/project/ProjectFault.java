package mouldwright.project;

import java.nio.file.Path;

/**
 * Something wrong with a project file.
 *
 * @param file    the project file
 * @param line    counted from 1
 * @param column  counted from 1, in characters
 * @param message what is wrong and what is allowed
 */
public record ProjectFault(Path file, int line, int column, String message) { }
