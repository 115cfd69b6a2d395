/** The command line: one class for each subcommand. Results go to standard output, everything else to standard error. */
package mouldwright.cli;
