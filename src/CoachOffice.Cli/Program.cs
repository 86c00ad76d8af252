return 64;
