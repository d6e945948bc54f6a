package starchfilm.learning.summary;

import java.util.List;

/**
 * Everything a notebook taught, to be shown.
 *
 * @param rooms the rooms, by name
 * @param kinds the starch kinds
 * @param pours factors of the maker's hand: how thick the pours are and how rich the pastes
 * @param films strength and elongation, for any starch and for each kind
 * @param doubted readings that hardly count
 * @param leftOut trials that nothing could be learnt from
 */
public record Learnt(
    List<RoomLearnt> rooms,
    List<KindLearnt> kinds,
    List<ParameterLearnt> pours,
    List<FilmLearnt> films,
    List<DoubtedReading> doubted,
    List<LeftOut> leftOut) {
  /** Nothing was learnt. */
  public static final Learnt NOTHING =
      new Learnt(List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

  public Learnt {
    rooms = List.copyOf(rooms);
    kinds = List.copyOf(kinds);
    pours = List.copyOf(pours);
    films = List.copyOf(films);
    doubted = List.copyOf(doubted);
    leftOut = List.copyOf(leftOut);
  }
}
