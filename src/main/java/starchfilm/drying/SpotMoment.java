package starchfilm.drying;

/**
 * One spot at one moment.
 *
 * @param timeS time since the pour (s)
 * @param meanMoisture moisture averaged over the thickness (kg/kg)
 * @param skinMoisture moisture of the driest open face (kg/kg)
 * @param coreMoisture moisture of the wettest point (kg/kg)
 * @param temperatureK temperature of film and plate (K)
 */
public record SpotMoment(
    double timeS,
    double meanMoisture,
    double skinMoisture,
    double coreMoisture,
    double temperatureK) {}
