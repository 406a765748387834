"""Flat parts for a router: operations by layer and depth, corner relief, nested sheets. Knows nothing of files."""
