package starchfilm.advice;

import starchfilm.drying.FactorModel;

/** What is known of the drying factors where and with what a plate is cast. */
@FunctionalInterface
public interface Knowledge {
  /**
   * The factors for a set-up, without the doubt its own notes add.
   *
   * @param setup the set-up; its room and its starch may be ones that something was learnt of
   * @return the factors
   */
  FactorModel of(Setup setup);

  /**
   * Before anything was learnt.
   *
   * @return the same factors for every set-up
   */
  static Knowledge textbook() {
    FactorModel textbook = FactorModel.textbook();
    return setup -> textbook;
  }
}
