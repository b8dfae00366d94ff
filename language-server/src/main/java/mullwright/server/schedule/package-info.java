/**
 * Schedules of a file's walls in the editor: as documents the server owns, or as files for editors
 * without these.
 *
 * <p>Entry: {@link mullwright.server.schedule.ScheduleCommands}.
 */
package mullwright.server.schedule;
