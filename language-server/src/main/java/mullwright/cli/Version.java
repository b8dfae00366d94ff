package mullwright.cli;

import picocli.CommandLine.IVersionProvider;

/** Tells the version the jar was built as. */
final class Version implements IVersionProvider {
  @Override
  public String[] getVersion() {
    String built = Version.class.getPackage().getImplementationVersion();
    return new String[] {"mullwright " + (built == null ? "of no release" : built)};
  }
}
