"""The shell: what every page of the desk stands in (frame, map, errors, the workplace of a request)."""
