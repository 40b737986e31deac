"""The course map: import, checks, local metric plane, and which area of the course a ball lies in."""
