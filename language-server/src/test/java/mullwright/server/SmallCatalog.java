package mullwright.server;

/** A catalog just large enough for a wall, all of it invented. */
final class SmallCatalog {
  static final String PATH = "catalog/small.wall";

  static final String TEXT =
      """
      catalog "Small, invented" {
        units inches
        system small {
          mullion       mullion-s
          jamb          mullion-s
          sill          rail-s
          head          rail-s
          intermediate  rail-s
          clip          clip-s
        }
        /// Runs between two lites.
        profile mullion-s {
          role   mullion
          face   2 1/2"
          depth  6"
          Ix     9.3545 in4
          Sx     3.1182 in3
          area   2.0625 in2
          mass   2.414 lb/ft
          stock  28'
          alloy  6063-T6
        }
        profile rail-s {
          role   intermediate
          face   2 1/2"
          depth  6"
          Ix     9.3545 in4
          Iy     2.3545 in4
          Sx     3.1182 in3
          Sy     1.8836 in3
          area   2.0625 in2
          mass   2.414 lb/ft
          stock  24'
          alloy  6063-T6
        }
        clip clip-s {
          metal       aluminium
          projection  2"
        }
        anchor angle-s {
          use        dead-load
          metal      steel
          bolt-line  8" below top of slab
        }
        anchor slot-s {
          use        wind-load
          metal      steel
          slot       1 1/2"
        }
        fastener bolt-s {
          metal     steel
          diameter  1/2"
        }
        isolation paint {
          kind  paint
        }
        glass V1 {
          ply    1/4" heat-strengthened clear
          space  1/2" air
          ply    1/4" annealed clear
        }
      }
      """;

  private SmallCatalog() {}
}
