package mullwright.server;

import java.util.List;

/**
 * Where commands come from: one by itself, or a family that differs only in what it is about.
 *
 * <p>A source is found by standing in {@code META-INF/services} (write
 * {@code @AutoService(CommandSource.class)} above it). All are made when the talk begins.
 */
public interface CommandSource {
  /** Its commands. */
  List<Command> commands();
}
