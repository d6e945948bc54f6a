package starchfilm.request;

import static starchfilm.files.amount.Dimension.SHARE;

import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import starchfilm.casting.Use;
import starchfilm.files.notebook.JarLevel;
import starchfilm.film.FilmProperty;
import starchfilm.learning.OwnScatter;
import starchfilm.learning.Workshop;
import starchfilm.material.ingredient.StarchKind;
import starchfilm.planning.Kitchen;
import starchfilm.planning.Pieces;
import starchfilm.planning.Plan;
import starchfilm.planning.PlanRequest;
import starchfilm.planning.Planner;
import starchfilm.planning.PlateScatter;
import starchfilm.planning.SeriesRequest;
import starchfilm.planning.StarchAtHand;
import starchfilm.planning.Supplies;
import starchfilm.planning.Wish;

/**
 * The question of what can be made of what is at hand.
 *
 * @param request what the planner is asked
 * @param jar the kept jar it takes from, where one was named
 * @param log the log of the room, where it has one
 * @param series the one thing to vary, where a series is asked for
 * @param pieces the film needed, where the plan is asked for backwards
 * @param now the clock on the wall when it was asked: the pour is then
 * @param assumptions what was taken for granted, a sentence each
 */
public record PlanQuestion(
    PlanRequest request,
    Optional<JarLevel> jar,
    Optional<Path> log,
    Optional<SeriesRequest> series,
    Optional<Pieces> pieces,
    LocalDateTime now,
    List<String> assumptions) {

  /** Strips that are pulled of each plate of a series; assumed. */
  public static final int STRIPS_EACH = 3;

  /**
   * Reads what was written.
   *
   * @param entries what was written
   * @param folder where a room log and a kept jar lie
   * @param clock the clock on the wall: the pour is now
   * @return the question
   * @throws RefusedRequestException where it cannot be meant
   */
  public static PlanQuestion read(Entries entries, Path folder, Clock clock) {
    EntryReader in = new EntryReader(entries);
    Optional<JarLevel> jar =
        WrittenJar.read(
            in, folder, "supplies.purity", "supplies.pure", "supplies.salt", "jar.origin");
    Optional<Supplies> supplies = WrittenSupplies.read(in, jar);
    Optional<Kitchen> kitchen = WrittenKitchen.read(in);
    Optional<Wish> wish = WrittenWish.read(in);
    Optional<WrittenPlace> place = WrittenPlace.read(in, Optional.empty(), folder, clock);
    OptionalDouble byS =
        in.number("when.by", typed -> WrittenDate.secondsFromNow(in, typed, clock));
    double sure = in.one("when.sure", SHARE::si, PlanRequest.USUALLY_SURE);
    if (byS.isPresent() && !in.has("when.sure")) {
      in.assume("ready in 8 of 10 likely cases");
    }
    Optional<Use> use = WrittenWish.use(in);
    Optional<SeriesRequest> series = WrittenSeries.read(in, kitchen, clock);
    Optional<Pieces> pieces = WrittenPieces.read(in);
    if (in.has("series.vary")) {
      in.refuseBeside("pieces.pieces", "series.vary", "; plan one of them at a time");
    }
    return in.finished(
        () ->
            new PlanQuestion(
                new PlanRequest(
                    supplies.orElseThrow(),
                    kitchen.orElseThrow(),
                    wish.orElseThrow(),
                    place.orElseThrow().place(),
                    byS,
                    sure,
                    use.orElseThrow()),
                jar,
                place.get().log(),
                series,
                pieces,
                LocalDateTime.now(clock),
                in.assumptions()));
  }

  /**
   * Tells whether trials in a folder can take from its jar by name.
   *
   * @param there the folder
   * @return false without a kept jar, or where that lies in another folder
   */
  public boolean isJarIn(Path there) {
    return jar.map(one -> one.jar().file().toAbsolutePath().resolveSibling("").normalize())
        .equals(Optional.of(there.toAbsolutePath().normalize()));
  }

  /**
   * Plans: recipes, a series, or backwards from the film needed.
   *
   * @param workshop what earlier trials taught
   * @return the answer
   * @throws RefusedRequestException where it cannot be made of what is at hand
   */
  public Plan answer(Workshop workshop) {
    List<StarchAtHand> starches = request.supplies().starches();
    Map<StarchKind, Double> evenShares =
        starches.stream()
            .collect(Collectors.toMap(StarchAtHand::kind, starch -> 1.0 / starches.size()));
    return RefusedRequestException.orRefused(
        () ->
            answer(new Planner(workshop.factors(request.place().learntRoom(), evenShares, false))));
  }

  private Plan answer(Planner planner) {
    if (series.isPresent()) {
      PlateScatter scatter =
          new PlateScatter(
              OwnScatter.drying(),
              OwnScatter.logSd(FilmProperty.TENSILE_STRENGTH, STRIPS_EACH),
              OwnScatter.logSd(FilmProperty.ELONGATION, STRIPS_EACH));
      return planner.series(request, series.get(), scatter);
    }
    return pieces
        .map(needed -> planner.pieces(request, needed))
        .orElseGet(() -> planner.plan(request));
  }
}
