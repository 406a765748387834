"""Views and sections: from boards put in place to lines, arcs and hatched areas, each with its board's id."""
