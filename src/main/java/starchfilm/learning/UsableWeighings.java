package starchfilm.learning;

import java.util.ArrayList;
import java.util.List;
import starchfilm.casting.trial.OddWeighing;
import starchfilm.casting.trial.Trial;
import starchfilm.casting.trial.Weighing;

/**
 * The weighings of a plate that are fitted: not the odd ones, and of a logging scale's thousands
 * every so many, for its readings of one hour all tell the same.
 *
 * @param used what is fitted, in order of time
 * @param every one of so many was looked at; 1 for all
 */
record UsableWeighings(List<Weighing> used, List<OddWeighing> odd, int every) {
  /**
   * More than this are thinned: the model's own miss is one for all readings of an hour, so that
   * more of them would narrow the range without telling more. Judged, no source.
   */
  static final int MOST = 60;

  static UsableWeighings of(Trial trial) {
    List<Weighing> noted = trial.seen().weighings();
    int every = (noted.size() + MOST - 1) / MOST;
    List<Weighing> looked = new ArrayList<>();
    for (int i = 0; i < noted.size(); i++) {
      if (i % every == 0 || i == noted.size() - 1 || noted.get(i).confirmed()) {
        looked.add(noted.get(i));
      }
    }
    List<OddWeighing> odd = OddWeighing.of(trial.casting(), looked);
    looked.removeAll(odd.stream().map(OddWeighing::weighing).toList());
    return new UsableWeighings(List.copyOf(looked), odd, every);
  }
}
