"""Laying parts out on boards and sheets: contenders try, an independent checker judges, the best answer wins."""
