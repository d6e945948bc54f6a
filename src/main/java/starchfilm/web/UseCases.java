package starchfilm.web;

import java.util.function.Function;
import starchfilm.advice.Adviser;
import starchfilm.learning.Workshops;
import starchfilm.trial.Trial;
import starchfilm.trial.TrialForecast;

/**
 * What the pages ask the program, as the commands ask it.
 *
 * @param forecast forecasts a trial in full
 * @param sketch forecasts a recipe that is being moved about: quicker, with fewer likely cases and
 *     without levers
 * @param sketchCases how many likely cases a sketch rests on
 * @param adviser tells what to try next
 * @param workshops what was learnt from the trials of the folder
 * @param questions what the commands answer too
 */
public record UseCases(
    Function<Trial, TrialForecast> forecast,
    Function<Trial, TrialForecast> sketch,
    int sketchCases,
    Adviser adviser,
    Workshops workshops,
    Questions questions) {}
