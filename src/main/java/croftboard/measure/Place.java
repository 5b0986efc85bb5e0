package croftboard.measure;

/**
 * A point on the map.
 *
 * @param town name for people
 * @param state two-letter code
 * @param latitude degrees north, -90 to 90
 * @param longitude degrees east, -180 to 180
 */
public record Place(String town, String state, double latitude, double longitude) {
    /** Mean earth radius in km, as stated with the published haversine example. */
    public static final double EARTH_RADIUS_KM = 6371.0;
    private static final double KM_PER_MILE = 1.609344;

    /** Straight-line distance by the haversine formula, in km on a sphere of {@code radiusKm}. */
    public double kilometresTo(Place other, double radiusKm) {
        double lat1 = Math.toRadians(latitude);
        double lat2 = Math.toRadians(other.latitude);
        double dLat = lat2 - lat1;
        double dLon = Math.toRadians(other.longitude - longitude);
        double a = Math.pow(Math.sin(dLat / 2), 2)
                + Math.pow(Math.sin(dLon / 2), 2) * Math.cos(lat1) * Math.cos(lat2);
        return 2 * radiusKm * Math.asin(Math.sqrt(a));
    }

    /** Straight-line miles; the road is longer. */
    public double milesTo(Place other) {
        return kilometresTo(other, EARTH_RADIUS_KM) / KM_PER_MILE;
    }
}
