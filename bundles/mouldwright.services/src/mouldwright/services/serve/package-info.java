/** The language server: the questions of editors, asked in the Language Server Protocol 3.17, put to a session of open specs. */
package mouldwright.services.serve;
