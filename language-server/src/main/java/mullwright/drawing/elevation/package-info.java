/** The elevation of a wall, seen from outdoors; the faces of a wall with corners side by side. */
package mullwright.drawing.elevation;
