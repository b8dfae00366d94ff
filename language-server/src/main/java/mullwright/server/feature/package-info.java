/**
 * One class a feature of the server, each a pure function of a snapshot.
 *
 * <p>Entry: any class here; its Javadoc names the method of the protocol and the client's
 * capabilities it heeds. Found by {@code META-INF/services}, which {@code @AutoService} writes; no
 * list names them. What is under the cursor comes from {@link mullwright.workspace.Cursor}. No
 * feature keeps state, but for those whose method has a memory in the protocol itself (delta and
 * unchanged answers).
 */
package mullwright.server.feature;
