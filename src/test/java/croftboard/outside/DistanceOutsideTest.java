package croftboard.outside;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Offset.offset;

import croftboard.measure.Place;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Great-circle distance by the haversine formula. */
class DistanceOutsideTest {
    private static final Place NASHVILLE = new Place("airport", "TN", 36.12, -86.67);
    private static final Place LOS_ANGELES = new Place("airport", "CA", 33.94, -118.40);

    /** Rosetta Code, Haversine formula: two airports, on the mean radius 6371.0 km and on 6372.8 km. */
    @ParameterizedTest(name = "radius {0} km: {1} km")
    @CsvSource({"6371.0, 2886.444443", "6372.8, 2887.259951"})
    void airports_areAsFarApartAsPrinted(double radius, double kilometres) {
        assertThat(NASHVILLE.kilometresTo(LOS_ANGELES, radius)).isCloseTo(kilometres, offset(1e-6));
        assertThat(LOS_ANGELES.kilometresTo(NASHVILLE, radius)).isCloseTo(kilometres, offset(1e-6));
    }

    /**
     * The house uses the mean radius 6371.0 km, so its miles are those kilometres over 1.609344 (UCUM: 5280
     * ft of 12 in).
     */
    @Test
    void miles_areOnTheMeanRadius() {
        assertThat(NASHVILLE.milesTo(LOS_ANGELES)).isCloseTo(2886.444443 / 1.609344, offset(1e-6));
    }

    /** UCUM: 400 mi = 643.7376 km. Walked due north from the store. */
    @Test
    void miles400_are643Point7376Kilometres() {
        double degrees = Math.toDegrees(643.7376 / Place.EARTH_RADIUS_KM);
        Place store = new Place("store", "NY", 30, -75);
        Place farm = new Place("farm", "NY", 30 + degrees, -75);
        assertThat(store.kilometresTo(farm, Place.EARTH_RADIUS_KM)).isCloseTo(643.7376, offset(1e-6));
        assertThat(store.milesTo(farm)).isCloseTo(400, offset(1e-6));
    }

    /**
     * RFC 7946 has longitude first, latitude second: taken that way round, the two airports would lie
     * elsewhere.
     */
    @Test
    void latitudeAndLongitude_areNotMixedUp() {
        Place a = new Place("x", "TN", NASHVILLE.longitude(), NASHVILLE.latitude());
        Place b = new Place("x", "CA", LOS_ANGELES.longitude(), LOS_ANGELES.latitude());
        assertThat(a.kilometresTo(b, 6371.0)).isNotCloseTo(2886.444443, offset(100.0));
    }

    /** RFC 7946 s. 5.2's box across the date line spans 5 degrees of longitude, not 355. */
    @Test
    void dateLine_isCrossedTheShortWay() {
        double acrossTheLine = new Place("a", "", 0, 177).kilometresTo(new Place("b", "", 0, -178), 6371.0);
        assertThat(acrossTheLine).isCloseTo(6371.0 * Math.toRadians(5), offset(1e-6));
    }
}
