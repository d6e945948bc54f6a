package starchfilm.planning;

import starchfilm.material.recipe.Recipe;

/**
 * One filling of the pot, rounded to the balance.
 *
 * @param plates plates it is poured on
 * @param times how often it is cooked
 * @param recipe what is weighed out, the water for the steam included
 * @param cookedKg what the pot's content weighs once the steam is made up for (kg)
 */
public record Potful(int plates, int times, Recipe recipe, double cookedKg) {}
