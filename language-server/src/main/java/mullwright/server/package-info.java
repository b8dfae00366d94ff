/**
 * The language server: one class a feature, each a pure function of a snapshot, spoken over
 * standard input and output.
 *
 * <p>Entry: {@link mullwright.server.ServeMain}. {@link mullwright.server.Service} is the table of
 * methods, {@link mullwright.server.Session} what the client has told so far, {@link
 * mullwright.server.Worker} the one thread that computes. The features stand in {@code feature} and
 * are found by themselves; adding one is adding a class that is a {@link
 * mullwright.server.Feature}.
 *
 * <p>The only package that knows LSP4J and JSON-RPC. It computes nothing about walls, opens no file
 * and writes nothing to the output but the protocol.
 */
package mullwright.server;
