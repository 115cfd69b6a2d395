/** How long the engine and the language take, by JMH. Nothing here is run by the build. */
package mouldwright.benchmarks;
