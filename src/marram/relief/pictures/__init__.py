"""Pictures: relief areas drawn to scale as SVG, as sheets and as GeoJSON."""
