package spoonfall.estimate;
public final class Tun { private Tun(){} public static double of(String k, double d){ String s=System.getProperty(k); return s==null?d:Double.parseDouble(s);} }
