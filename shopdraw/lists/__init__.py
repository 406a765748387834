"""Lists for people who buy and cut: cut list, materials, buying. Knows nothing of files."""
