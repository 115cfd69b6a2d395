/**
 * One session for every front: reads specs through their project, checks them, plans them, lays them out. Nothing here prints.
 */
package mouldwright.services;
