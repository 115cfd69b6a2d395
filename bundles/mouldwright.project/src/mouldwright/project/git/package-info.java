/** Reading files as they were in an earlier revision. */
package mouldwright.project.git;
