package mullwright.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version the jar was built as. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    return new String[] {"mullwright " + Program.version()};
  }
}
