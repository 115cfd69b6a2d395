/** When things are done: a working calendar, tasks that wait for each other, and a crew that can only be in one place. Pure arithmetic on
 *  seconds; knows nothing of plugs. */
package mouldwright.plan.programme;
