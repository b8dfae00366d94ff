package mullwright.model;

import mullwright.syntax.Remark;

/** A remark, with the statement it stands at. */
public record Remarked(Remark.Kind kind, String text, Origin origin, Origin statement) {}
