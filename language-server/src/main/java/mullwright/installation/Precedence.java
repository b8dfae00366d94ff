package mullwright.installation;

/**
 * One step must be done before another.
 *
 * @param before index of the step that comes first, {@code after} of the one that waits
 * @param reason why, as a clause: {@code it hangs on it}
 */
public record Precedence(int before, int after, String reason) {}
