"""Boards, cuts, joints, assemblies and findings as values; their exact volumes and their solids."""
