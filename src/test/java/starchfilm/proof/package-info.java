/**
 * What the tests that try to break the program share: how many cases there are, bad input by the
 * thousand from a seed, and notebooks of any size.
 */
package starchfilm.proof;
