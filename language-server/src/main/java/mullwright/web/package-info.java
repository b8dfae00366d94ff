/**
 * The editor in a browser: a page on loopback that edits the walls of one folder, with the same
 * server behind it that other editors talk to.
 *
 * <p>Begin with {@link mullwright.web.WebDoor}. {@link mullwright.web.Site} gives out the page and
 * the files, {@link mullwright.web.Talks} carries the protocol's messages over WebSocket to a
 * server of its own for each page, {@link mullwright.web.Gate} decides who may ask. Nothing here
 * knows a message of the protocol, or a wall; nothing is loaded unless somebody opens the door.
 */
package mullwright.web;
