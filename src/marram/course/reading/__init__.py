"""Reading: a file of GeoJSON or OpenStreetMap XML, or a list of measured points, becomes a course in metres."""
