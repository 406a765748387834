"""Plane paths of lines and true arcs, frames in space, and the bridge to shapely. Knows nothing of wood."""
